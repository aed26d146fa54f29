using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.IO;
using System.Linq;
using System.Reflection.Emit;
using System.Reflection.Metadata;
using System.Reflection.Metadata.Ecma335;
using System.Reflection.PortableExecutable;

namespace Pattern.Core.Tests.Conventions;

/// <summary>Reads everything that the types of an assembly use from the compiled code itself: signatures, fields, locals, instructions, caught
/// exceptions, attributes with their type arguments, constraints. However a name was written in the source, it is found here.</summary>
internal sealed class AssemblyScan : ISignatureTypeProvider<string, object?>, ICustomAttributeTypeProvider<string>
{
    private static readonly Dictionary<ushort, OpCode> Instructions = typeof(OpCodes).GetFields()
        .Select(field => (OpCode)field.GetValue(null)!)
        .ToDictionary(code => (ushort)code.Value);

    private readonly PEReader _file;
    private readonly MetadataReader _reader;
    private readonly HashSet<AssemblyReference> _found = [];
    private (string Namespace, string Name) _from;

    private AssemblyScan(Stream assembly)
    {
        _file = new PEReader(assembly);
        _reader = _file.GetMetadataReader();
    }

    internal static IReadOnlyCollection<AssemblyReference> Of(string path)
    {
        using FileStream stream = File.OpenRead(path);
        return Of(stream);
    }

    internal static IReadOnlyCollection<AssemblyReference> Of(Stream assembly)
    {
        var scan = new AssemblyScan(assembly);
        using (scan._file)
        {
            foreach (TypeDefinitionHandle handle in scan._reader.TypeDefinitions)
            {
                scan.VisitType(handle);
            }

            return scan._found.OrderBy(found => found.ToString(), StringComparer.Ordinal).ToArray();
        }
    }

    private void VisitType(TypeDefinitionHandle handle)
    {
        TypeDefinition type = _reader.GetTypeDefinition(handle);
        _from = Outermost(handle);
        Use(type.BaseType);
        VisitAttributes(type.GetCustomAttributes());
        VisitGenerics(type.GetGenericParameters());
        foreach (InterfaceImplementation implemented in type.GetInterfaceImplementations().Select(_reader.GetInterfaceImplementation))
        {
            Use(implemented.Interface);
        }

        foreach (FieldDefinition field in type.GetFields().Select(_reader.GetFieldDefinition))
        {
            field.DecodeSignature(this, null);
            VisitAttributes(field.GetCustomAttributes());
        }

        foreach (PropertyDefinition property in type.GetProperties().Select(_reader.GetPropertyDefinition))
        {
            VisitAttributes(property.GetCustomAttributes());
        }

        foreach (EventDefinition raised in type.GetEvents().Select(_reader.GetEventDefinition))
        {
            Use(raised.Type);
            VisitAttributes(raised.GetCustomAttributes());
        }

        foreach (MethodDefinition method in type.GetMethods().Select(_reader.GetMethodDefinition))
        {
            VisitMethod(method);
        }
    }

    private void VisitMethod(MethodDefinition method)
    {
        method.DecodeSignature(this, null);
        VisitAttributes(method.GetCustomAttributes());
        VisitGenerics(method.GetGenericParameters());
        foreach (Parameter parameter in method.GetParameters().Select(_reader.GetParameter))
        {
            VisitAttributes(parameter.GetCustomAttributes());
        }

        // A record's own list of its members is written by the compiler even where ToString is overridden and nothing calls it.
        bool isUnasked = _reader.GetString(method.Name) == "PrintMembers" && method.GetCustomAttributes().Count > 0;
        if (method.RelativeVirtualAddress == 0 || isUnasked)
        {
            return;
        }

        MethodBodyBlock body = _file.GetMethodBody(method.RelativeVirtualAddress);
        Use(body.LocalSignature);
        foreach (ExceptionRegion region in body.ExceptionRegions)
        {
            Use(region.CatchType);
        }

        VisitInstructions(body.GetILReader());
    }

    private void VisitInstructions(BlobReader code)
    {
        EntityHandle constrainedTo = default;
        while (code.RemainingBytes > 0)
        {
            ushort value = code.ReadByte();
            OpCode instruction = Instructions[value == 0xFE ? (ushort)(0xFE00 | code.ReadByte()) : value];
            switch (instruction.OperandType)
            {
                case OperandType.InlineField or OperandType.InlineMethod or OperandType.InlineTok or OperandType.InlineType or OperandType.InlineSig:
                    EntityHandle operand = MetadataTokens.EntityHandle(code.ReadInt32());
                    Use(operand);
                    if (!constrainedTo.IsNil)
                    {
                        // A method of object called on a struct: what runs is the struct's own.
                        UseMember(constrainedTo, NameOf(operand), SignatureOf(operand), []);
                    }

                    constrainedTo = instruction == OpCodes.Constrained ? operand : default;
                    break;
                case OperandType.InlineSwitch:
                    int targets = code.ReadInt32();
                    code.Offset += 4 * targets;
                    break;
                default:
                    code.Offset += SizeOf(instruction.OperandType);
                    break;
            }
        }
    }

    private StringHandle NameOf(EntityHandle method) => method.Kind switch
    {
        HandleKind.MethodDefinition => _reader.GetMethodDefinition((MethodDefinitionHandle)method).Name,
        HandleKind.MethodSpecification => NameOf(_reader.GetMethodSpecification((MethodSpecificationHandle)method).Method),
        _ => _reader.GetMemberReference((MemberReferenceHandle)method).Name,
    };

    private ImmutableArray<string> SignatureOf(EntityHandle method) => method.Kind switch
    {
        HandleKind.MethodDefinition => _reader.GetMethodDefinition((MethodDefinitionHandle)method).DecodeSignature(this, null).ParameterTypes,
        HandleKind.MethodSpecification => SignatureOf(_reader.GetMethodSpecification((MethodSpecificationHandle)method).Method),
        _ => _reader.GetMemberReference((MemberReferenceHandle)method).DecodeMethodSignature(this, null).ParameterTypes,
    };

    private static int SizeOf(OperandType operand) => operand switch
    {
        OperandType.InlineNone => 0,
        OperandType.ShortInlineBrTarget or OperandType.ShortInlineI or OperandType.ShortInlineVar => 1,
        OperandType.InlineVar => 2,
        OperandType.InlineI8 or OperandType.InlineR => 8,
        _ => 4,
    };

    private void VisitGenerics(GenericParameterHandleCollection generics)
    {
        foreach (GenericParameter generic in generics.Select(_reader.GetGenericParameter))
        {
            VisitAttributes(generic.GetCustomAttributes());
            foreach (GenericParameterConstraint constraint in generic.GetConstraints().Select(_reader.GetGenericParameterConstraint))
            {
                Use(constraint.Type);
            }
        }
    }

    private void VisitAttributes(CustomAttributeHandleCollection attributes)
    {
        foreach (CustomAttribute attribute in attributes.Select(_reader.GetCustomAttribute))
        {
            Use(attribute.Constructor);
            attribute.DecodeValue(this);
        }
    }

    private void Use(EntityHandle handle)
    {
        if (handle.IsNil)
        {
            return;
        }

        switch (handle.Kind)
        {
            case HandleKind.TypeDefinition:
                GetTypeFromDefinition(_reader, (TypeDefinitionHandle)handle, 0);
                break;
            case HandleKind.TypeReference:
                GetTypeFromReference(_reader, (TypeReferenceHandle)handle, 0);
                break;
            case HandleKind.TypeSpecification:
                _reader.GetTypeSpecification((TypeSpecificationHandle)handle).DecodeSignature(this, null);
                break;
            case HandleKind.FieldDefinition:
                UseMember(_reader.GetFieldDefinition((FieldDefinitionHandle)handle).GetDeclaringType(), _reader.GetFieldDefinition((FieldDefinitionHandle)handle).Name, null, []);
                break;
            case HandleKind.StandaloneSignature:
                StandaloneSignature standalone = _reader.GetStandaloneSignature((StandaloneSignatureHandle)handle);
                if (standalone.GetKind() == StandaloneSignatureKind.LocalVariables)
                {
                    standalone.DecodeLocalSignature(this, null);
                }
                else
                {
                    standalone.DecodeMethodSignature(this, null);
                }

                break;
            default:
                UseMethod(handle, []);
                break;
        }
    }

    private void UseMethod(EntityHandle handle, ImmutableArray<string> typeArguments)
    {
        if (handle.Kind == HandleKind.MethodSpecification)
        {
            MethodSpecification made = _reader.GetMethodSpecification((MethodSpecificationHandle)handle);
            UseMethod(made.Method, made.DecodeSignature(this, null));
        }
        else if (handle.Kind == HandleKind.MethodDefinition)
        {
            MethodDefinition method = _reader.GetMethodDefinition((MethodDefinitionHandle)handle);
            UseMember(method.GetDeclaringType(), method.Name, method.DecodeSignature(this, null).ParameterTypes, typeArguments);
        }
        else
        {
            MemberReference member = _reader.GetMemberReference((MemberReferenceHandle)handle);
            if (member.GetKind() == MemberReferenceKind.Field)
            {
                member.DecodeFieldSignature(this, null);
                UseMember(member.Parent, member.Name, null, []);
            }
            else
            {
                UseMember(member.Parent, member.Name, member.DecodeMethodSignature(this, null).ParameterTypes, typeArguments);
            }
        }
    }

    private void UseMember(EntityHandle owner, StringHandle name, ImmutableArray<string>? parameters, ImmutableArray<string> typeArguments)
    {
        string type = owner.Kind switch
        {
            HandleKind.TypeDefinition => GetTypeFromDefinition(_reader, (TypeDefinitionHandle)owner, 0),
            HandleKind.TypeReference => GetTypeFromReference(_reader, (TypeReferenceHandle)owner, 0),
            HandleKind.TypeSpecification => _reader.GetTypeSpecification((TypeSpecificationHandle)owner).DecodeSignature(this, null),
            _ => string.Empty,
        };
        string arguments = typeArguments.IsEmpty ? string.Empty : $"<{string.Join(",", typeArguments)}>";
        string suffix = parameters is { } list ? $"({string.Join(",", list)})" : string.Empty;
        int end = type.IndexOf('<', StringComparison.Ordinal);
        string plain = end < 0 ? type : type[..end];
        int dot = plain.LastIndexOf('.');
        Add(dot < 0 ? string.Empty : plain[..dot], dot < 0 ? plain : plain[(dot + 1)..], _reader.GetString(name) + arguments + suffix);
    }

    private void Add(string space, string name, string member) => _found.Add(new AssemblyReference(_from.Namespace, _from.Name, space, name, member));

    private (string Namespace, string Name) Outermost(TypeDefinitionHandle handle)
    {
        TypeDefinition type = _reader.GetTypeDefinition(handle);
        while (!type.GetDeclaringType().IsNil)
        {
            type = _reader.GetTypeDefinition(type.GetDeclaringType());
        }

        return (_reader.GetString(type.Namespace), _reader.GetString(type.Name));
    }

    private (string Namespace, string Name) Outermost(TypeReferenceHandle handle)
    {
        TypeReference type = _reader.GetTypeReference(handle);
        while (type.ResolutionScope.Kind == HandleKind.TypeReference)
        {
            type = _reader.GetTypeReference((TypeReferenceHandle)type.ResolutionScope);
        }

        return (_reader.GetString(type.Namespace), _reader.GetString(type.Name));
    }

    private string Used((string Namespace, string Name) type)
    {
        Add(type.Namespace, type.Name, string.Empty);
        return type.Namespace.Length == 0 ? type.Name : type.Namespace + "." + type.Name;
    }

    // How signatures are spelled; each type met on the way counts as used.
    public string GetTypeFromDefinition(MetadataReader reader, TypeDefinitionHandle handle, byte rawTypeKind) => Used(Outermost(handle));

    public string GetTypeFromReference(MetadataReader reader, TypeReferenceHandle handle, byte rawTypeKind) => Used(Outermost(handle));

    public string GetTypeFromSpecification(MetadataReader reader, object? genericContext, TypeSpecificationHandle handle, byte rawTypeKind)
        => reader.GetTypeSpecification(handle).DecodeSignature(this, genericContext);

    // In an attribute, typeof(X) is written as text: the name, for a nested type with +, then the assembly.
    public string GetTypeFromSerializedName(string name)
    {
        foreach (string part in name.Split('[', ']'))
        {
            string plain = part.Split(',')[0].Split('+')[0].Split('`')[0].Trim();
            int dot = plain.LastIndexOf('.');
            if (dot > 0)
            {
                Used((plain[..dot], plain[(dot + 1)..]));
            }
        }

        return name;
    }

    public string GetSystemType() => "System.Type";

    public bool IsSystemType(string type) => type == "System.Type";

    // How many bytes a value of it takes in an attribute.
    public PrimitiveTypeCode GetUnderlyingEnumType(string type)
        => (Type.GetType(type) ?? AppDomain.CurrentDomain.GetAssemblies().Select(assembly => assembly.GetType(type)).FirstOrDefault(found => found is not null)) is { IsEnum: true } known
            ? Enum.Parse<PrimitiveTypeCode>(Enum.GetUnderlyingType(known).Name)
            : PrimitiveTypeCode.Int32;

    public string GetPrimitiveType(PrimitiveTypeCode typeCode) => "System." + typeCode;

    public string GetArrayType(string elementType, ArrayShape shape) => elementType + "[,]";

    public string GetSZArrayType(string elementType) => elementType + "[]";

    public string GetByReferenceType(string elementType) => elementType + "&";

    public string GetPointerType(string elementType) => elementType + "*";

    public string GetPinnedType(string elementType) => elementType;

    public string GetGenericInstantiation(string genericType, ImmutableArray<string> typeArguments) => $"{genericType}<{string.Join(",", typeArguments)}>";

    public string GetGenericMethodParameter(object? genericContext, int index) => "!!" + index;

    public string GetGenericTypeParameter(object? genericContext, int index) => "!" + index;

    public string GetFunctionPointerType(MethodSignature<string> signature) => "function pointer";

    public string GetModifiedType(string modifier, string unmodifiedType, bool isRequired) => unmodifiedType;
}
